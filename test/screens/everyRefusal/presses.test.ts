import { meetGroups } from './meetGroups.ts'
import { pressGroups } from './pressGroups.ts'

meetGroups(pressGroups)
