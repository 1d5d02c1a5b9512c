import ts from 'typescript'

/** What an import names, or `undefined` where it is worked out only when the program runs. */
export type Imported = string | undefined

/**
 * Every module that a source file asks for: import and export declarations, types only or not, `import()` as an expression or
 * a type, `import x = require()`, and calls of `require`.
 */
export function importsOf(fileName: string, source: string): Imported[] {
  const file = ts.createSourceFile(fileName, source, ts.ScriptTarget.Latest, true)
  const found: Imported[] = []
  const visit = (node: ts.Node): void => {
    const named = importedBy(node)
    if (named !== undefined) found.push(ts.isStringLiteralLike(named) ? named.text : undefined)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return found
}

/** The expression that names a module, where the node asks for one. */
function importedBy(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier
  if (ts.isExternalModuleReference(node)) return node.expression
  if (ts.isImportTypeNode(node))
    return ts.isLiteralTypeNode(node.argument) ? node.argument.literal : node.argument
  if (!ts.isCallExpression(node)) return undefined
  const asks =
    node.expression.kind === ts.SyntaxKind.ImportKeyword ||
    (ts.isIdentifier(node.expression) && node.expression.text === 'require')
  return asks ? (node.arguments[0] ?? node) : undefined
}
