/**
 * The command that opens an address in the system's browser, or `null` where there is nobody to look at it: no
 * terminal, a CI, no desktop.
 *
 * @param {string} url
 * @param {{ platform: string, env: Record<string, string | undefined>, stdout: { isTTY?: boolean } }} where
 *   e.g. `process`
 * @returns {{ command: string, args: string[] } | null}
 */
export function opener(url, { platform, env, stdout }) {
  if (!stdout.isTTY || env.CI) return null;
  if (platform === 'darwin') return { command: 'open', args: [url] };
  if (platform === 'win32') return { command: 'explorer.exe', args: [url] };
  return env.DISPLAY || env.WAYLAND_DISPLAY ? { command: 'xdg-open', args: [url] } : null;
}
