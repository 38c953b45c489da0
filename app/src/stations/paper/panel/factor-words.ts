import type { Printer } from '@seamwright/pages';

const percent = (factor: number): string => `${Math.round(factor * 10_000) / 100} %`;

/** `It prints 97.3 % across and 98.9 % down.` */
export const factorsInWords = ({ across, down }: Pick<Printer, 'across' | 'down'>): string =>
  `It prints ${percent(across)} across and ${percent(down)} down.`;
