export async function testNeovim() {
  throw new Error('not yet');
}
