'use server'

import { type CheckAnswer, checkedRecord, noRecord } from './checkedRecord.ts'

/** Checks a PDF that comes with a form, as it does without script; with script it goes to `check/record`. */
export async function checkThisRecord(_previous: unknown, form: FormData): Promise<CheckAnswer> {
  const upload = form instanceof FormData ? form.get('record') : null
  if (!(upload instanceof File) || upload.size === 0) return noRecord
  const read = async () => new Uint8Array(await upload.arrayBuffer())
  return checkedRecord(upload.name.slice(0, 120), upload.size, read)
}
