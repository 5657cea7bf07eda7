/** The shape of a line: a first word, what it is about, and items; any line at all has this shape. */
import { CstParser, tokenMatcher, type CstNode, type IToken } from 'chevrotain';
import { isQuote } from './characters.ts';
import { adjoins, numeralLength } from './numerals.ts';
import * as token from './tokens.ts';
import { isUnit } from './units.ts';
import { detailWord, entryWord, nameFollows } from './vocabulary.ts';

/** @param validated whether the grammar itself is looked over, which a test does once, so that no start has to */
export class LineParser extends CstParser {
  constructor(validated: boolean) {
    super(token.TOKENS, { recoveryEnabled: false, maxLookahead: 1, skipValidations: !validated });
    this.performSelfAnalysis();
  }

  /** A line never fails to parse: what fits nowhere is junk. Tokens and nodes stand side by side in `item`. */
  line = this.RULE('line', () => {
    this.OPTION(() => {
      const first = this.CONSUME(token.Word, { LABEL: 'first' });
      this.OPTION1({
        GATE: () => takesName(first) && this.atName(),
        DEF: () => this.SUBRULE(this.name, { LABEL: 'item' }),
      });
    });
    this.MANY(() =>
      this.OR({
        IGNORE_AMBIGUITIES: true,
        DEF: [
          { GATE: () => this.atMeasure(), ALT: () => this.SUBRULE(this.sum, { LABEL: 'item' }) },
          { ALT: () => this.phrase() },
          { ALT: () => this.CONSUME(token.Anything, { LABEL: 'item' }) },
        ],
      }),
    );
  });

  /** A word, and behind `on`, `with`, `by` and their like a name. */
  private phrase(): void {
    const word = this.CONSUME1(token.Word, { LABEL: 'item' });
    this.OPTION2({
      GATE: () => nameFollows(word.image) && this.atName(),
      DEF: () => this.SUBRULE1(this.name, { LABEL: 'item' }),
    });
  }

  /** The next run without blank, comma or quote. */
  name = this.RULE('name', () => {
    this.CONSUME(token.NamePart);
    this.MANY({
      GATE: () => adjoins(this.LA(0), this.LA(1)) && this.atName(),
      DEF: () => this.CONSUME1(token.NamePart),
    });
  });

  /** Where there are as many signs as terms, the first one is the sign of the first number. */
  sum = this.RULE('sum', () => {
    this.OPTION(() => this.sign(1));
    this.SUBRULE(this.term);
    this.MANY({
      GATE: () => this.isSign(1) && this.isNumeral(2),
      DEF: () => {
        this.sign(2);
        this.SUBRULE1(this.term);
      },
    });
  });

  private sign(occurrence: 1 | 2): void {
    this.or(occurrence, [
      { ALT: () => this.consume(occurrence, token.Plus, { LABEL: 'sign' }) },
      { ALT: () => this.consume(occurrence, token.Minus, { LABEL: 'sign' }) },
    ]);
  }

  term = this.RULE('term', () => {
    this.OR([
      {
        ALT: () => {
          this.SUBRULE(this.measure);
          this.OPTION({
            GATE: () => this.isNumeral(2),
            DEF: () => {
              this.CONSUME(token.PlusMinus);
              this.SUBRULE1(this.measure, { LABEL: 'uncertainty' });
            },
          });
        },
      },
      {
        ALT: () => {
          this.CONSUME1(token.PlusMinus);
          this.SUBRULE2(this.measure, { LABEL: 'uncertainty' });
        },
      },
    ]);
    this.OPTION1(() => this.CONSUME(token.Text));
  });

  /** One number with its unit, or several: feet and inches; degrees, minutes and seconds. */
  measure = this.RULE('measure', () => {
    this.SUBRULE(this.part);
    this.MANY({ GATE: () => this.continuesMeasure(), DEF: () => this.SUBRULE1(this.part) });
  });

  part = this.RULE('part', () => {
    let left = this.ACTION(() => numeralLength(this.look, 1));
    this.OR([
      { ALT: () => this.CONSUME(token.Number, { LABEL: 'numeral' }) },
      { ALT: () => this.CONSUME(token.Packed, { LABEL: 'numeral' }) },
      { ALT: () => this.CONSUME(token.Question, { LABEL: 'numeral' }) },
    ]);
    this.MANY({
      GATE: () => left > 1,
      DEF: () => {
        left--;
        this.CONSUME(token.Anything, { LABEL: 'numeral' });
      },
    });
    this.OPTION({
      GATE: () => this.atUnit(),
      DEF: () => {
        this.OR1([
          { ALT: () => this.CONSUME(token.DegreeMark, { LABEL: 'unit' }) },
          { ALT: () => this.CONSUME(token.MinuteMark, { LABEL: 'unit' }) },
          { ALT: () => this.CONSUME(token.SecondsMark, { LABEL: 'unit' }) },
          { ALT: () => this.CONSUME(token.Percent, { LABEL: 'unit' }) },
          { ALT: () => this.CONSUME(token.Word, { LABEL: 'unit' }) },
        ]);
        this.OPTION1({
          GATE: () =>
            tokenMatcher(this.LA(0), token.DegreeMark) &&
            this.LA(1).image === 'C' &&
            adjoins(this.LA(0), this.LA(1)),
          DEF: () => this.CONSUME1(token.Word, { LABEL: 'celsius' }),
        });
      },
    });
  });

  private atName(): boolean {
    return tokenMatcher(this.LA(1), token.NamePart) && !isQuote(this.LA(1).image);
  }

  private readonly look = (ahead: number) => this.LA(ahead);

  /** A sign belongs to a number; before a lone `±` it belongs to nothing. */
  private atMeasure(): boolean {
    const isPrefix = this.isSign(1) || tokenMatcher(this.LA(1), token.PlusMinus);
    return this.isNumeral(isPrefix ? 2 : 1);
  }

  private isSign(ahead: number): boolean {
    const next = this.LA(ahead);
    return tokenMatcher(next, token.Plus) || tokenMatcher(next, token.Minus);
  }

  private isNumeral(ahead: number): boolean {
    const next = this.LA(ahead);
    return numerals.some((type) => tokenMatcher(next, type));
  }

  /** `in EPSG:4258` names a system, whatever stands before it. */
  private atUnit(): boolean {
    const next = this.LA(1);
    if (!tokenMatcher(next, token.Word)) return true;
    return isUnit(next.image) && !(next.image === 'in' && this.LA(3).image === ':');
  }

  /** Inches behind feet, minutes behind degrees, seconds behind minutes; a further number stands on its own. */
  private continuesMeasure(): boolean {
    if (!this.isNumeral(1)) return false;
    const before = this.LA(0);
    const unit = this.LA(1 + numeralLength(this.look, 1));
    if (before.image === 'ft') return unit.image === 'in';
    if (tokenMatcher(before, token.DegreeMark)) return tokenMatcher(unit, token.MinuteMark);
    return tokenMatcher(before, token.MinuteMark) && tokenMatcher(unit, token.SecondsMark);
  }
}

const numerals = [token.Number, token.Packed, token.Question];

const parser = new LineParser(false);

/** The parser's own tree of one line's tokens (no blanks, no comment, no line end); null should a line not fit its shape. */
export function parseLine(tokens: IToken[]): CstNode | null {
  parser.input = tokens;
  const tree = parser.line();
  return parser.errors.length === 0 ? tree : null;
}

function takesName(first: IToken | undefined): boolean {
  if (!first) return false;
  const spec = entryWord(first.image) ?? detailWord(first.image);
  return spec?.subject === 'name';
}
