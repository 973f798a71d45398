import { defaultSettings, type Settings } from '../recall'
import { putRecord } from './aside'
import { rawRecord, reading, writing } from './database'
import { SETTINGS_KEY } from './keys'
import { readRecord } from './records'

/** The defaults where none were saved, or where they cannot be read: the app must work without them. */
export const getSettings = (): Promise<Settings> =>
  reading(async (store) => {
    const read = readRecord('settings', await rawRecord(store, SETTINGS_KEY))
    return read.ok ? read.record : defaultSettings
  })

export const saveSettings = (settings: Settings): Promise<void> =>
  writing((store) => putRecord(store, 'settings', SETTINGS_KEY, settings))

/**
 * Changes the settings as they are kept now, whatever this page read before: another window may have changed them
 * since. Gives them as they are then.
 */
export const changeSettings = (change: (settings: Settings) => Settings): Promise<Settings> =>
  writing(async (store) => {
    const read = readRecord('settings', await rawRecord(store, SETTINGS_KEY))
    const changed = change(read.ok ? read.record : defaultSettings)
    await putRecord(store, 'settings', SETTINGS_KEY, changed)
    return changed
  })
