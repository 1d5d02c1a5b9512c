import { fileLimits, type MediaType } from '../core/agreement/attachedFile.ts'

const endings: Readonly<Record<MediaType, string>> = {
  'image/jpeg': '.jpg',
  'image/png': '.png',
  'image/webp': '.webp',
  'application/pdf': '.pdf',
}

/**
 * A name that somebody gave a file, fit to be shown: its last part, one line, nothing that turns the direction of reading
 * or hides (Unicode's control and format characters), in whole characters; 'file' where nothing is left.
 */
export function shownName(given: string): string {
  const last = given.split(/[\\/]/).at(-1) ?? ''
  const plain = last
    .toWellFormed()
    .normalize('NFC')
    .replace(/\s+/g, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Zl}\p{Zp}]/gu, '')
    .trim()
  const short = [...plain].slice(0, fileLimits.name).join('').trim()
  return /[\p{L}\p{N}]/u.test(short) ? short : 'file'
}

/** A name for a file to be saved: plain letters and figures, so that every system takes it, and the ending of its content. */
export function savedName(name: string, mediaType: MediaType): string {
  const stem = name.replace(/(\.(jpe?g|jfif|png|webp|pdf))+$/i, '')
  const plain = stem
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase()
    .slice(0, 60)
    .replace(/-$/, '')
  return `${plain || 'file'}${endings[mediaType]}`
}
