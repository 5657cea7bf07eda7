export async function serveVscodeWeb() {
  throw new Error('not yet');
}
