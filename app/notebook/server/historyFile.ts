import { beforeTheFirst, entryText, type HistoryEntry, headOf } from '../../../lib/store/historyChain.ts'
import { historyChainText } from '../../../lib/words/historyText.ts'

/**
 * A whole history as a file: each entry is what its hash was worked out from, with the hash itself, so that anyone can
 * work the chain out again from the file alone.
 */
export function historyFile(history: readonly HistoryEntry[]): string {
  const entries = history.map((entry, index) => {
    const { number, hash } = entry
    const text = entryText(entry, number, history[index - 1]?.hash ?? beforeTheFirst)
    return { ...(JSON.parse(text) as object), hash }
  })
  const file = {
    format: 'mearing-history',
    version: 1,
    how: historyChainText,
    newest: headOf(history),
    entries,
  }
  return `${JSON.stringify(file, null, 2)}\n`
}
