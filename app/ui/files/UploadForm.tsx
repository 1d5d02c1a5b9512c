'use client'

import { useRouter } from 'next/navigation'
import { type SubmitEvent, useActionState, useRef, useState } from 'react'
import { fileSentRefusals } from '../../../lib/words/fileText.ts'
import { ErrorSummary } from '../draft/ErrorSummary.tsx'
import { describedBy, FieldFrame } from '../draft/FieldFrame.tsx'
import { fieldId } from '../draft/fieldId.ts'
import type { PressAction, PressAnswer } from '../draft/PressForm.tsx'
import type { Fault } from '../draft/saveAnswer.ts'
import { useLeaveGuard } from '../draft/useLeaveGuard.ts'
import { useReady } from '../draft/useReady.ts'
import { UploadList } from './UploadList.tsx'
import { uploadWords } from './uploadWords.ts'
import { useUploads } from './useUploads.ts'

const form = 'upload'

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
  const ready = useReady()
  const box = useRef<HTMLFormElement>(null)
  const [answer, send] = useActionState<PressAnswer, FormData>(action, {})
  const { uploads, busy, start, stop } = useUploads(address, limits.bytes)
  const [said, setSaid] = useState('')
  const [lacks, setLacks] = useState<{ readonly faults: readonly Fault[]; readonly attempt: number }>({
    faults: [],
    attempt: 0,
  })
  useLeaveGuard(busy)

  const submit = async (event: SubmitEvent<HTMLFormElement>) => {
    // Then React does not send it by the action.
    event.preventDefault()
    if (busy) return
    const data = new FormData(event.currentTarget)
    const files = data.getAll('file').filter((file) => file instanceof File && file.name !== '') as File[]
    const text = (name: string) => String(data.get(name) ?? '')
    setSaid('')
    const faults = [
      ...(files.length === 0 ? [{ path: 'file', message: fileSentRefusals.none }] : []),
      ...(text('kind') === '' ? [{ path: 'kind', message: fileSentRefusals.noKind }] : []),
    ]
    setLacks(({ attempt }) => ({ faults, attempt: attempt + 1 }))
    if (faults.length > 0) return
    const about = { kind: text('kind'), caption: text('caption'), item: text('item') }
    const added = await start(files, about)
    if (added === files.length) {
      box.current?.reset()
      setSaid(uploadWords.allAdded(added))
    } else setSaid(uploadWords.someAdded(added, files.length))
    if (added > 0) router.refresh()
  }

  const field = (path: string, hint = false) => {
    const errors = lacks.faults.filter((fault) => fault.path === path).map(({ message }) => message)
    const id = fieldId(form, path)
    return {
      frame: { id, errors },
      control: {
        id,
        name: path,
        'aria-invalid': errors.length > 0 ? (true as const) : undefined,
        'aria-describedby': describedBy(id, { hint, errors: errors.length > 0 }),
      },
    }
  }
  const [file, kind, item, caption] = [
    field('file', true),
    field('kind'),
    field('item'),
    field('caption', true),
  ]
  return (
    // Without script the browser itself asks for what is needed.
    <form className="upload-form" ref={box} action={send} onSubmit={submit} noValidate={ready}>
      {lacks.faults.length === 0 ? null : (
        <ErrorSummary
          faults={lacks.faults}
          fields={['file', 'kind']}
          form={form}
          attempt={lacks.attempt}
          done="saved"
        />
      )}
      <FieldFrame
        {...file.frame}
        label={uploadWords.file}
        hint={uploadWords.fileHint(limits.formats, limits.size)}
      >
        <input {...file.control} type="file" multiple required accept={limits.accept} />
      </FieldFrame>
      <div className="field-line">
        <FieldFrame {...kind.frame} label={uploadWords.kind}>
          <select {...kind.control} required defaultValue="">
            <option value="" disabled>
              {uploadWords.choose}
            </option>
            <Options of={kinds} />
          </select>
        </FieldFrame>
        <FieldFrame {...item.frame} label={uploadWords.item}>
          <select {...item.control} defaultValue={chosenItem}>
            <Options of={items} />
          </select>
        </FieldFrame>
      </div>
      <FieldFrame {...caption.frame} label={uploadWords.caption} hint={uploadWords.captionHint}>
        <input {...caption.control} type="text" maxLength={limits.caption} />
      </FieldFrame>
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

function Options({ of }: { of: readonly Option[] }) {
  return of.map(({ value, label }) => (
    <option key={value} value={value}>
      {label}
    </option>
  ))
}
