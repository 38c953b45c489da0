/**
 * Why this Node cannot run the program, or `null` when it can.
 *
 * @param {string} version e.g. `20.20.2`
 * @param {string} range the `engines.node` field; only `>=MAJOR.MINOR` is understood
 * @returns {string | null} one sentence
 */
export function nodeProblem(version, range) {
  const least = /^>=(\d+)\.(\d+)$/.exec(range);
  if (least === null) throw new Error(`engines.node is ${range}; this check reads only >=MAJOR.MINOR`);
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [needMajor, needMinor] = [Number(least[1]), Number(least[2])];
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return null;
  return `Seamwright needs Node ${needMajor}.${needMinor} or newer, and this is Node ${version}: install a newer one and try again.`;
}
