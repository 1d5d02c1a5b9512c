// Run at the start: makes the install's own key and certificate where there are none yet, and says what is wrong with them
// where something is. The program starts all the same: without a seal, only locking a record waits.
import { sealKey } from '../seal/sealKey.ts'
import { closeDatabase } from '../store/database.ts'
import { dataFolder } from '../store/dataFolder.ts'
import { anythingSealed } from '../store/sealedPapers.ts'
import { sealKeyText } from '../words/sealKeyText.ts'

const key = await sealKey(dataFolder(), new Date(), { sealedBefore: await anythingSealed() })
await closeDatabase()
if (!key.ok) console.log(`Records can’t be locked for now. ${sealKeyText(key.fault)}`)
