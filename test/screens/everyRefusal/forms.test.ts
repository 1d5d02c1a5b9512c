import { formGroups } from './formGroups.ts'
import { meetGroups } from './meetGroups.ts'

meetGroups(formGroups)
