import type { SealKeyFault } from '../core/agreement/sealKeyFault.ts'
import { never } from '../core/assert.ts'
import { dayWords } from './day.ts'

/** What is wrong with the install's own seal, and what whoever runs the install can do. */
export function sealKeyText(fault: SealKeyFault): string {
  switch (fault.kind) {
    case 'missing':
      return `The seal of this install is gone: the file ${fault.file} is missing. Bring it back from the backup of the data folder. ${anew(fault.file, fault.note)}`
    case 'unreadable':
      return `The seal of this install can’t be read: ${fault.file}: ${fault.detail}. Let the program read this file, or bring it back from the backup of the data folder.`
    case 'open-to-others':
      return `Others on this machine can read or change ${fault.file} (mode ${fault.mode}). Close it first: chmod 600 ${fault.file}. If a stranger may have read the key, begin a new seal.`
    case 'broken':
      return `The file ${fault.file} does not hold one key with its certificate. Bring it back from the backup of the data folder. ${anew(fault.file, fault.note)}`
    case 'other-key':
      return `The file ${fault.file} holds another seal than the one this install has used so far. Its fingerprint is ${fault.found}. It should be ${fault.expected}. Bring the file back from the backup of the data folder. ${anew(fault.file, fault.note)}`
    case 'expired':
      return `The seal in ${fault.file} was good until ${dayWords(fault.since.toISOString().slice(0, 10))}. Look at the clock of this machine first. ${anew(fault.file, fault.note)}`
    case 'not-kept':
      return `The seal of this install can’t be kept: ${fault.file}: ${fault.detail}. See that the data folder is there, that the program may write in it, and that the disk is not full.`
    default:
      return never(fault)
  }
}

function anew(file: string, note: string): string {
  return `Or begin a new seal knowingly: move ${file} away and keep it if it is there, and write the one word new into ${note}. Papers that are locked already stay as they are, with their old seal.`
}

/** Why a locked copy is not given out. */
export const lockedCopyRefusals = {
  notYet: (fault: SealKeyFault) =>
    `The locked copy can't be made yet. All signatures are kept.\n\n${sealKeyText(fault)}\n`,
} as const
