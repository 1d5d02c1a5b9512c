'use client'

import { useRouter } from 'next/navigation'
import { type SubmitEvent, useActionState, useRef, useState } from 'react'
import { fileSentRefusals } from '../../../lib/words/fileText.ts'
import type { PressAction, PressAnswer } from '../draft/PressForm.tsx'
import { useLeaveGuard } from '../draft/useLeaveGuard.ts'
import { UploadList } from './UploadList.tsx'
import { uploadWords } from './uploadWords.ts'
import { useUploads } from './useUploads.ts'

type Option = { readonly value: string; readonly label: string }

/**
 * Adds files: with script one after the other, each with its progress; without, as an ordinary form that `action` takes.
 * `address` is where one file is sent; `size` and `formats` say in words what is taken.
 */
export function UploadForm({
  address,
  action,
  kinds,
  items,
  chosenItem,
  limits,
}: {
  address: string
  action: PressAction
  kinds: readonly Option[]
  items: readonly Option[]
  chosenItem: string
  limits: {
    readonly bytes: number
    readonly caption: number
    readonly size: string
    readonly formats: string
    readonly accept: string
  }
}) {
  const router = useRouter()
  const form = useRef<HTMLFormElement>(null)
  const [answer, send] = useActionState<PressAnswer, FormData>(action, {})
  const { uploads, busy, start, stop } = useUploads(address, limits.bytes)
  const [said, setSaid] = useState('')
  useLeaveGuard(busy)

  const submit = async (event: SubmitEvent<HTMLFormElement>) => {
    // Then React does not send it by the action.
    event.preventDefault()
    if (busy) return
    const data = new FormData(event.currentTarget)
    const files = data.getAll('file').filter((file) => file instanceof File && file.name !== '') as File[]
    if (files.length === 0) return setSaid(fileSentRefusals.none)
    setSaid('')
    const text = (name: string) => String(data.get(name) ?? '')
    const about = { kind: text('kind'), caption: text('caption'), item: text('item') }
    const added = await start(files, about)
    if (added === files.length) {
      form.current?.reset()
      setSaid(uploadWords.allAdded(added))
    } else setSaid(uploadWords.someAdded(added, files.length))
    if (added > 0) router.refresh()
  }

  return (
    <form className="upload-form" ref={form} action={send} onSubmit={submit}>
      <div className="field">
        <label className="field-label" htmlFor="upload-file">
          {uploadWords.file}
        </label>
        <p className="field-hint" id="upload-file-hint">
          {uploadWords.fileHint(limits.formats, limits.size)}
        </p>
        <input
          id="upload-file"
          name="file"
          type="file"
          multiple
          required
          accept={limits.accept}
          aria-describedby="upload-file-hint"
        />
      </div>
      <div className="field-line">
        <div className="field">
          <label className="field-label" htmlFor="upload-kind">
            {uploadWords.kind}
          </label>
          <select id="upload-kind" name="kind" required defaultValue="">
            <option value="" disabled>
              {uploadWords.choose}
            </option>
            {kinds.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label className="field-label" htmlFor="upload-item">
            {uploadWords.item}
          </label>
          <select id="upload-item" name="item" defaultValue={chosenItem}>
            {items.map(({ value, label }) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
        </div>
      </div>
      <div className="field">
        <label className="field-label" htmlFor="upload-caption">
          {uploadWords.caption}
        </label>
        <p className="field-hint" id="upload-caption-hint">
          {uploadWords.captionHint}
        </p>
        <input
          id="upload-caption"
          name="caption"
          type="text"
          maxLength={limits.caption}
          aria-describedby="upload-caption-hint"
        />
      </div>
      <div>
        <button type="submit" className="button button-main" disabled={busy}>
          {uploadWords.add}
        </button>
      </div>
      <UploadList uploads={uploads} onStop={stop} />
      <p className="press-answer" role="status" data-kind={answer.refused === undefined ? 'done' : 'refused'}>
        {answer.refused ?? said}
      </p>
    </form>
  )
}
