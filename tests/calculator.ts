/** A pocket calculator for the arithmetic that stories print; it knows nothing of the program's own formulas. */

/** The value of an expression of numbers, + − · / ², brackets, √ and tan (degrees). */
export function calculate(expression: string): number {
  const tokens = expression.match(/[\d.]+|tan|[()+\u2212\-·/√²]/g) ?? [];
  if (tokens.join('') !== expression.replaceAll(' ', '')) throw new Error(`not arithmetic: ${expression}`);
  let at = 0;
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (tokens[at] === '+') {
        at++;
        value += product();
      } else if (isMinus(tokens[at])) {
        at++;
        value -= product();
      } else return value;
    }
  };
  const product = (): number => {
    let value = signed();
    for (;;) {
      if (tokens[at] === '·') {
        at++;
        value *= signed();
      } else if (tokens[at] === '/') {
        at++;
        value /= signed();
      } else return value;
    }
  };
  const signed = (): number => {
    if (!isMinus(tokens[at])) return squared();
    at++;
    return -squared();
  };
  const squared = (): number => {
    let value = atom();
    while (tokens[at] === '²') {
      at++;
      value *= value;
    }
    return value;
  };
  const atom = (): number => {
    const token = tokens[at++];
    if (token === '√') return Math.sqrt(atom());
    if (token === 'tan') return Math.tan((atom() * Math.PI) / 180);
    if (token === '(') {
      const value = sum();
      if (tokens[at++] !== ')') throw new Error(`a bracket is open: ${expression}`);
      return value;
    }
    const value = Number(token);
    if (Number.isNaN(value)) throw new Error(`not a number: ${token} in ${expression}`);
    return value;
  };
  const value = sum();
  if (at !== tokens.length) throw new Error(`left over: ${tokens.slice(at).join(' ')} in ${expression}`);
  return value;
}

const isMinus = (token: string | undefined) => token === '\u2212' || token === '-';
