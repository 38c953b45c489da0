import { compose, identity, rotation, scaling, type Transform, translation } from '@seamwright/geometry';
import { ONLY_SEPARATORS, parseNumbers } from './numbers.ts';

/** SVG's user units are CSS pixels until the viewport says how large they are. */
export type UserTransform = Transform<'screen'>;

const NEXT_FUNCTION = /[\s,]*([a-zA-Z]+)\s*\(([^()]*)\)/y;

/**
 * The value of a `transform` attribute; null when it is not written as SVG 1.1 has it (section 7.6), since
 * passing over part of it would move lines in silence.
 */
export function parseTransform(text: string): UserTransform | null {
  let whole: UserTransform = identity();
  let end = 0;
  NEXT_FUNCTION.lastIndex = 0;
  for (let match = NEXT_FUNCTION.exec(text); match !== null; match = NEXT_FUNCTION.exec(text)) {
    const one = parseFunction(match[1]!, match[2]!);
    if (one === null) return null;
    // The function written last is the first to be done to a point.
    whole = compose(one, whole);
    end = NEXT_FUNCTION.lastIndex;
  }
  return ONLY_SEPARATORS.test(text.slice(end)) ? whole : null;
}

function parseFunction(name: string, args: string): UserTransform | null {
  const numbers = parseNumbers(args);
  if (numbers === null) return null;
  // Which of them are there is told by the count in the case.
  const [a, b, c, d, e, f] = numbers as [number, number, number, number, number, number];
  switch (`${name}/${numbers.length}`) {
    case 'matrix/6':
      return { a, b, c, d, e, f };
    case 'translate/1':
      return translation(a, 0);
    case 'translate/2':
      return translation(a, b);
    case 'scale/1':
      return scaling(a);
    case 'scale/2':
      return scaling(a, b);
    case 'rotate/1':
      return rotation(a);
    case 'rotate/3':
      return rotation(a, { x: b, y: c });
    case 'skewX/1':
      return { ...identity(), c: Math.tan(radians(a)) };
    case 'skewY/1':
      return { ...identity(), b: Math.tan(radians(a)) };
    default:
      return null;
  }
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
