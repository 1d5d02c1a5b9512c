/** The fields of a press, by name. A browser can send anything in the place of a form, and that has no fields. */
export function pressFields(form: unknown): Readonly<Record<string, FormDataEntryValue>> {
  return form instanceof FormData ? Object.fromEntries(form) : {}
}
