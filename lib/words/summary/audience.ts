/** For whom a summary is: the two households, or somebody who is not to see what anything costs. */
export type Audience = 'the households' | 'without costs'
