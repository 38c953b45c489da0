/**
 * Stands in for the libraries that jsPDF would load to turn web pages into pictures (see `pnpm-workspace.yaml`):
 * nothing here asks it to.
 */
export default undefined;
