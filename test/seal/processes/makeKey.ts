import { sealKey } from '../../../lib/seal/sealKey.ts'

// Prints the fingerprint of the seal of the data folder that it is given, or why there is none.
const made = await sealKey(process.argv[2] ?? '', new Date('2027-03-01T08:00:00Z'))
process.stdout.write(made.ok ? made.value.fingerprint : JSON.stringify(made.fault))
