import ts from 'typescript'

/** What turns facts into the sentence of a refusal; the facts are listed by their kinds. And what is no refusal at all. */
const factWords = new Set([
  'confirmingRefusalText',
  'entryObjectionText',
  'faultOfItem',
  'faultText',
  'faultTextIn',
  'faultTexts',
  'fieldFault',
  'fileFaults',
  'fileRefusalText',
  'letterFaultText',
  'obstacleSentences',
  'proposalRefusalWords',
  'tooLargeText',
  'wholeFaultText',
  // Findings and figures that warn beside a field and refuse nothing; that a connection was lost, or work was stopped.
  'capsFallShort',
  'findingText',
  'pressFailure',
  'uploadWords',
  'workWords',
])

/** Where a refusal is given: `refused: …`, `message: …`, and what a function of that name is called with. */
const givers = new Set(['refused', 'message', 'refuse', 'gone', 'refusal', 'plain'])

/**
 * Each refusal of a file whose sentence stands in no list: it is written out where it is given, or comes from words that no
 * object of refusals holds. A value that was worked out before is not followed.
 */
export function looseRefusals(fileName: string, source: string): string[] {
  const file = ts.createSourceFile(fileName, source, ts.ScriptTarget.Latest, true)
  const imported = new Set<string>()
  const loose: string[] = []
  const look = (given: ts.Expression) => {
    const said = unlisted(given, imported)
    if (said !== undefined) loose.push(`${fileName}: ${said}`)
  }
  const visit = (node: ts.Node): void => {
    if (ts.isImportSpecifier(node)) imported.add(node.name.text)
    if (ts.isPropertyAssignment(node) && givers.has(node.name.getText())) look(node.initializer)
    if (ts.isCallExpression(node) && givers.has(node.expression.getText())) node.arguments.forEach(look)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return loose
}

/** What is said of an expression that gives an unlisted sentence; undefined where it gives none. */
function unlisted(given: ts.Expression, imported: ReadonlySet<string>): string | undefined {
  if (ts.isStringLiteral(given) || ts.isNoSubstitutionTemplateLiteral(given))
    return / /.test(given.text) ? given.text : undefined
  if (ts.isTemplateExpression(given)) return given.getText()
  if (ts.isConditionalExpression(given))
    return unlisted(given.whenTrue, imported) ?? unlisted(given.whenFalse, imported)
  if (ts.isBinaryExpression(given)) return unlisted(given.left, imported) ?? unlisted(given.right, imported)
  const root = rootOf(given)
  const listed =
    root === undefined || !imported.has(root) || /(Refusals|Faults)$/.test(root) || factWords.has(root)
  return listed ? undefined : root
}

/** The name that an expression begins with: `words` in `words.of(one)`. */
function rootOf(given: ts.Expression): string | undefined {
  if (ts.isIdentifier(given)) return given.text
  if (
    ts.isPropertyAccessExpression(given) ||
    ts.isElementAccessExpression(given) ||
    ts.isCallExpression(given)
  )
    return rootOf(given.expression)
  return undefined
}
