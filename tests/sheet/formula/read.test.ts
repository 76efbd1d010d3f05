import { describe, expect, it } from "vitest";
import { withBrackets } from "../../../src/sheet/formula/span";
import { type Span, tokensOf } from "../../../src/sheet/formula/token";
import { nodesOf } from "../../../src/sheet/formula/walk";
import { bracketed, treeOf } from "./trees";

/** Formulas as people type them and files hold them, with the tree each must give. */
const formulas: readonly [what: string, formula: string, tree: string][] = [
  ["a number", "=2.40", "2.40"],
  ["a sheet called TRUE without quotation marks", "=true!A1+TRUE", "(<true!A1> + true)"],
  ["the same beside a colon", "=(A):(TRUE!B)", "(<A> : <TRUE!B>)"],
  ["a function with a name in other letters", "=Öl(1)", "Öl[1]"],
  ["a number with an exponent", "=1.5E+3", "1.5E+3"],
  ["a number that begins with its point", "=.5", ".5"],
  ["a formula without its equals sign, as files hold it", "A1", "<A1>"],
  ["text with quotation marks doubled", '="2"" pipe"', '"2\\" pipe"'],
  ["empty text", '=""', '""'],
  ["text over two lines", '="a\nb"', '"a\\nb"'],
  ["a truth value in any case", "=True", "true"],
  ["an error", "=#n/a", "#N/A"],

  // what binds tighter
  ["products before sums", "=1+2*3", "(1 + (2 * 3))"],
  ["brackets before products", "=(1+2)*3", "((1 + 2) * 3)"],
  ["equal strength from the left", "=8/4/2-1-1", "((((8 / 4) / 2) - 1) - 1)"],
  ["powers from the left", "=2^3^2", "((2 ^ 3) ^ 2)"],
  ["a minus sign before a power", "=-2^2", "((-2) ^ 2)"],
  ["a minus sign after a power", "=2^-2", "(2 ^ (-2))"],
  ["per cent after a minus sign", "=-5%", "((-5)%)"],
  ["per cent of per cent", "=5%%", "((5%)%)"],
  ["joining after adding", '=A1+1&" mL"', '((<A1> + 1) & " mL")'],
  ["comparing last", '=A1&"a"<>B1+1', '((<A1> & "a") <> (<B1> + 1))'],
  ["comparisons from the left", "=1<2=TRUE", "((1 < 2) = true)"],
  ["several signs", "=--A1", "(-(-<A1>))"],
  ["subtracting a negative", "=1--1", "(1 - (-1))"],
  ["spaces and new lines anywhere", "= ( 1 +\n 2 ) * 3 ", "((1 + 2) * 3)"],

  // references
  ["an absolute cell", "=$A$1", "<$A$1>"],
  ["a block", "=SUM(A1:$B$9)", "SUM[<A1:$B$9>]"],
  ["a block with a space before its colon", "=A1 :B2", "<A1:B2>"],
  ["whole columns and rows", "=SUM(A:A,1:3,$B:$C)", "SUM[<A:A>; <1:3>; <$B:$C>]"],
  ["the last cell of a sheet", "=XFD1048576", "<XFD1048576>"],
  ["a sheet", "=Lots!A1", "<Lots!A1>"],
  ["a quoted sheet", "='Bob''s (log), 2026'!A1*2", "(<'Bob''s (log), 2026'!A1> * 2)"],
  ["several sheets", "=SUM(Jan:Dec!B2)", "SUM[<Jan:Dec!B2>]"],
  [
    "a linked workbook by number",
    "=[2]Lots!A1+'[3]May lots'!B2",
    "(<[2]Lots!A1> + <'[3]May lots'!B2>)",
  ],
  ["a linked workbook by name", "=[May.xlsx]Log!A1", "<[May.xlsx]Log!A1>"],
  [
    "a closed workbook by path",
    "='C:\\lots\\[May.xlsx]Log'!A1+'https://a.example/b/[c.xlsx]d'!B2",
    "(<'C:\\lots\\[May.xlsx]Log'!A1> + <'https://a.example/b/[c.xlsx]d'!B2>)",
  ],
  ["a name", "=blank_mL*2", "(<blank_mL> * 2)"],
  ["a name of a linked workbook", "=[1]!rate", "<[1]!rate>"],
  ["names that only look like cells", "=ABCD1+XFE1+A1048577", "((<ABCD1> + <XFE1>) + <A1048577>)"],
  ["a reference that was lost", "=Lots!#REF!+#REF!", "(<Lots!#REF!> + #REF!)"],
  ["what two blocks share", "=A1:B3 B2:C4", "(<A1:B3> _ <B2:C4>)"],
  ["a union, in brackets", "=SUM((A1,B2:C3),D1)", "SUM[(<A1> , <B2:C3>); <D1>]"],
  ["a union of a name", "=Lots!$A$1,Lots!$C$1", "(<Lots!$A$1> , <Lots!$C$1>)"],
  ["sharing before joining", "=(A1,B1 B1:C1)", "(<A1> , (<B1> _ <B1:C1>))"],
  ["a block to a function's cell", "=SUM(A1:INDEX(A:A,9))", "SUM[(<A1> : INDEX[<A:A>; 9])]"],
  [
    "a block between functions",
    "=INDEX(A:A,1):INDEX(A:A,9)",
    "(INDEX[<A:A>; 1] : INDEX[<A:A>; 9])",
  ],
  ["blocks on one sheet", "=SUM(Lots!A1:Lots!B2)", "SUM[(<Lots!A1> : <Lots!B2>)]"],
  ["all that a cell spills", "=SUM(E1#)", "SUM[(<E1>#)]"],
  ["one of a range", "=@A1:A9", "(@<A1:A9>)"],

  // tables
  ["a column", "=SUM(Titrations[Mass g])", "SUM[<Titrations[Mass g]>]"],
  ["this row, as cells show it", "=Titrations[@[Titre 1 mL]]", "<Titrations[@[Titre 1 mL]]>"],
  ["this row, inside the table", "=[@Mass]/[@[Titre 1, mL]]", "(<[@Mass]> / <[@[Titre 1, mL]]>)"],
  [
    "this row, as files hold it",
    "SUM(Titrations[[#This Row],[Titre 1 mL]:[Titre 6 mL]])",
    "SUM[<Titrations[[#This Row],[Titre 1 mL]:[Titre 6 mL]]>]",
  ],
  ["headers and a column", "=T[[#Headers],[#Data],[% FFA]]", "<T[[#Headers],[#Data],[% FFA]]>"],
  ["spaces inside", "=T[ [#This Row], [A] ]", "<T[ [#This Row], [A] ]>"],
  ["escapes inside", "=T['#'[y''']]", "<T['#'[y''']]>"],
  ["the whole table", "=ROWS(T[#All])+COLUMNS(T[])", "(ROWS[<T[#All]>] + COLUMNS[<T[]>])"],
  ["from one column to another", "=SUM(T[@a]:T[@f])", "SUM[(<T[@a]> : <T[@f]>)]"],
  ["what two columns share", "=T[[a]:[b]] T[[b]:[c]]", "(<T[[a]:[b]]> _ <T[[b]:[c]]>)"],

  // functions
  ["no argument", "=TODAY()", "TODAY[]"],
  ["arguments left out", "=F(a_,,b_)", "F[<a_>; -; <b_>]"],
  ["arguments left out at the end", "=F(1,,)", "F[1; -; -]"],
  ["nothing but commas", "=F(,)", "F[-; -]"],
  ["nested calls", '=IF(A1="","",ROUND(B1,2))', 'IF[(<A1> = ""); ""; ROUND[<B1>; 2]]'],
  ["newer functions, as files mark them", "_xlfn.STDEV.S(A1:A3)", "_xlfn.STDEV.S[<A1:A3>]"],
  ["functions marked twice", "_xlfn._xlws.FILTER(A:A,B:B)", "_xlfn._xlws.FILTER[<A:A>; <B:B>]"],
  ["LET", "=LET(x,1,x+1)", "LET[<x>; 1; (<x> + 1)]"],
  ["a function applied", "=LAMBDA(x,x+1)(2)", "LAMBDA[<x>; (<x> + 1)][2]"],
  ["TRUE as a function", "=TRUE()", "TRUE[]"],
  ["a function of a linked workbook", "='my tools.xlam'!F(1)", "'my tools.xlam'!F[1]"],

  // array constants
  ["rows and columns", "={1,2;3,4}", "{1; 2 | 3; 4}"],
  ["signs, texts, truths, errors", '={-1,"a""b";TRUE,#N/A}', '{-1; "a\\"b" | true; #N/A}'],

  // our own functions
  [
    "ours",
    '=TITRE.DOSE({2.4,2.5},"neutralised",0.1)',
    'TITRE.DOSE[{2.4; 2.5}; "neutralised"; 0.1]',
  ],
  ["ours, as files hold it", "_xldudf_TITRE_CORRECTED(A1:A3)", "_xldudf_TITRE_CORRECTED[<A1:A3>]"],
  ["ours, through a link", "[2]!_xldudf_TITRE_SOAP(1)", "[2]!_xldudf_TITRE_SOAP[1]"],
  ["ours, in another case", "=titre.Soap(1)", "titre.Soap[1]"],
  ["ours, with a space before its bracket", "=TITRE.SOAP (1)", "TITRE.SOAP[1]"],
  ["text that only looks like a call", '="TITRE.DOSE("&A1', '("TITRE.DOSE(" & <A1>)'],
];

describe("reading formulas", () => {
  it.each(formulas)("reads %s: %s", (_, formula, tree) => {
    expect(bracketed(treeOf(formula))).toBe(tree);
  });

  it.each(formulas)("cuts %s into tokens that join again: %s", (_, formula) => {
    expect(
      tokensOf(formula)
        .map((token) => token.text)
        .join(""),
    ).toBe(formula);
  });

  it("knows where each part stands, without the brackets around it and with them", () => {
    const text = "=F( ( (1+2) ) , B2*3, (2*(A1)) )";
    const tree = treeOf(text);
    if (tree.kind !== "call") throw new Error(tree.kind);
    const cut = ({ start, end }: Span) => text.slice(start, end);
    expect(tree.arguments.map(cut)).toEqual(["1+2", "B2*3", "2*(A1)"]);
    expect(tree.arguments.map((each) => cut(withBrackets(each)))).toEqual([
      "( (1+2) )",
      "B2*3",
      "(2*(A1))",
    ]);
  });

  it("knows where the name of a call stands, link and all, whatever brackets are around it", () => {
    const text = "=-( ([2]!F(1)) )/G(2)";
    const names = [...nodesOf(treeOf(text))].flatMap((node) =>
      node.kind === "call" ? [text.slice(node.nameAt.start, node.nameAt.end)] : [],
    );
    expect(names).toEqual(["[2]!F", "G"]);
  });
});
