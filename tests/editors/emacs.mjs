export async function testEmacs() {
  throw new Error('not yet');
}
