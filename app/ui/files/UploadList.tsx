'use client'

import { uploadWords } from './uploadWords.ts'
import type { Upload } from './useUploads.ts'

function standingWords({ standing, fraction, refused }: Upload): string {
  switch (standing) {
    case 'waiting':
      return uploadWords.waiting
    case 'sending':
      return uploadWords.sending(Math.floor(fraction * 100))
    case 'checking':
      return uploadWords.checking
    case 'added':
      return uploadWords.added
    case 'stopped':
      return uploadWords.cancelled
    case 'refused':
      return refused ?? ''
  }
}

/** The files that are being sent, each with how far it is and a way to stop it. */
export function UploadList({
  uploads,
  onStop,
}: {
  uploads: readonly Upload[]
  onStop: (key: string) => void
}) {
  if (uploads.length === 0) return null
  return (
    <ul className="upload-list" aria-label="Files being added">
      {uploads.map((upload) => {
        const { key, name, standing, fraction } = upload
        const stoppable = standing === 'waiting' || standing === 'sending'
        return (
          <li key={key} className="upload" data-standing={standing}>
            {/* A refusal names the file itself. */}
            {standing === 'refused' ? null : <p className="upload-name">{name}</p>}
            {stoppable || standing === 'checking' ? (
              <progress
                className="upload-progress"
                max={1}
                value={fraction}
                aria-label={`How much of ${name} is sent`}
              />
            ) : null}
            <p className="upload-standing">{standingWords(upload)}</p>
            {stoppable ? (
              <button type="button" className="button button-plain" onClick={() => onStop(key)}>
                {uploadWords.cancel}
                <span className="only-read-out">: {name}</span>
              </button>
            ) : null}
          </li>
        )
      })}
    </ul>
  )
}
