/** The id of the field at a path: `materials[0].quantity` in form `field` gives `field-materials-0-quantity`. */
export function fieldId(form: string, path: string): string {
  const tail = path.replaceAll(/[^A-Za-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '')
  return `${form}-${tail === '' ? 'whole' : tail}`
}
