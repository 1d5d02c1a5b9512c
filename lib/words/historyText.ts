/** How the hashes of an exported history are worked out: stands in the history file and in the record pack. */
export const historyChainText = [
  'Every entry has a hash, and every hash covers the hash before it. So nothing can be changed, left out or put in without changing all hashes after it.',
  'To work out the hash of an entry, take the entry without its "hash". Write it as canonical JSON (RFC 8785: keys in order, no blanks). The SHA-256 of that text, as UTF-8, is the hash.',
  'The "previous" of an entry is the hash of the entry before it. For the first entry it is 64 zeros.',
] as const
