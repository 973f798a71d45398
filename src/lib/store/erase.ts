/** Takes everything out that was ever kept here, whatever it is: also what cannot be read, the demo and what came from pupils. */
import { writing } from './database'

/** All of it or nothing, in one transaction. It cannot be undone. */
export const eraseAll = (): Promise<void> =>
  writing(async (store) => {
    store.clear()
  })
