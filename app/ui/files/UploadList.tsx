'use client'

import { sizeWords } from '../../../lib/words/fileText.ts'
import { quartersOf, workWords } from '../../../lib/words/workText.ts'
import { useInSight } from '../draft/useInSight.ts'
import { uploadWords } from './uploadWords.ts'
import type { Upload } from './useUploads.ts'

const underWay: readonly Upload['standing'][] = ['sending', 'checking', 'stopping']
const stoppable: readonly Upload['standing'][] = ['waiting', 'sending', 'checking']

function standingWords({ standing, size, fraction, refused }: Upload): string {
  switch (standing) {
    case 'waiting':
      return uploadWords.waiting
    case 'sending':
      return uploadWords.sending(
        Math.floor(fraction * 100),
        sizeWords(Math.floor(fraction * size)),
        sizeWords(size),
      )
    case 'checking':
      return uploadWords.checking
    case 'stopping':
      return workWords.stopping
    case 'added':
      return uploadWords.added
    case 'stopped':
      return uploadWords.cancelled
    case 'refused':
      return refused ?? ''
  }
}

/** What is said aloud: at every quarter of a file, when all of it is sent, and how it ended; not at every percent. */
function saidAloud(uploads: readonly Upload[]): string {
  const now = uploads.find(({ standing }) => underWay.includes(standing))
  if (now === undefined) return ''
  const place =
    uploads.length === 1 ? now.name : uploadWords.place(now.name, uploads.indexOf(now) + 1, uploads.length)
  const how = now.standing === 'sending' ? workWords.quarter(quartersOf(now.fraction)) : standingWords(now)
  return `${place}: ${how}`
}

/** The files that are being sent, each with how far it is and a way to stop it; and one to stop all that are left. */
export function UploadList({
  uploads,
  onStop,
}: {
  uploads: readonly Upload[]
  onStop: (key: string) => void
}) {
  const left = uploads.filter(({ standing }) => stoppable.includes(standing))
  return (
    <>
      <p className="only-read-out" role="status">
        {saidAloud(uploads)}
      </p>
      {uploads.length === 0 ? null : (
        <ul className="upload-list" aria-label={uploadWords.list}>
          {uploads.map((upload) => (
            <UploadRow key={upload.key} upload={upload} onStop={onStop} />
          ))}
        </ul>
      )}
      {left.length < 2 ? null : (
        <div>
          <button
            type="button"
            className="button button-plain"
            onClick={() => {
              for (const { key } of left.toReversed()) onStop(key)
            }}
          >
            {uploadWords.stopAll}
          </button>
        </div>
      )}
    </>
  )
}

function UploadRow({ upload, onStop }: { upload: Upload; onStop: (key: string) => void }) {
  const { key, name, standing, fraction } = upload
  const said = useInSight<HTMLParagraphElement>(standing, standing === 'refused')
  const bar = standing === 'waiting' || underWay.includes(standing)
  return (
    <li className="upload" data-standing={standing}>
      {/* A refusal names the file itself. */}
      {standing === 'refused' ? null : <p className="upload-name">{name}</p>}
      {bar ? (
        <progress
          className="upload-progress"
          max={1}
          // How long the checking takes nobody can tell.
          value={standing === 'checking' || standing === 'stopping' ? undefined : fraction}
          aria-label={uploadWords.bar(name)}
        />
      ) : null}
      {/* A refusal comes when nobody looks any more: it is said, and brought into sight. */}
      <p className="upload-standing" ref={said} role={standing === 'refused' ? 'alert' : undefined}>
        {standingWords(upload)}
      </p>
      {stoppable.includes(standing) ? (
        <button type="button" className="button button-plain" onClick={() => onStop(key)}>
          {workWords.stop}
          <span className="only-read-out">: {name}</span>
        </button>
      ) : null}
    </li>
  )
}
