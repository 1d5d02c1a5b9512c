import ts from 'typescript'

/**
 * The kinds that a union type tells apart: its texts, or the `kind` of each of its objects.
 *
 * @throws Error where the file has no such type, or a member of it has no kind
 */
export function kindsIn(fileName: string, source: string, type: string): string[] {
  const file = ts.createSourceFile(fileName, source, ts.ScriptTarget.Latest, true)
  const declared = file.statements.find(
    (one): one is ts.TypeAliasDeclaration => ts.isTypeAliasDeclaration(one) && one.name.text === type,
  )
  if (declared === undefined) throw new Error(`${fileName} has no type ${type}`)
  const members = ts.isUnionTypeNode(declared.type) ? declared.type.types : [declared.type]
  return members.map((member) => {
    const kind = textOf(member) ?? kindOf(member)
    if (kind === undefined) throw new Error(`${type} has a member without a kind: ${member.getText()}`)
    return kind
  })
}

function kindOf(member: ts.TypeNode): string | undefined {
  if (!ts.isTypeLiteralNode(member)) return undefined
  const kind = member.members.find((one) => ts.isPropertySignature(one) && one.name.getText() === 'kind')
  return kind !== undefined && ts.isPropertySignature(kind) && kind.type ? textOf(kind.type) : undefined
}

function textOf(type: ts.TypeNode): string | undefined {
  return ts.isLiteralTypeNode(type) && ts.isStringLiteral(type.literal) ? type.literal.text : undefined
}
