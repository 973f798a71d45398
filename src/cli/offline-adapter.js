// The static adapter, and beside its pages the list of built files that the service worker keeps. SvelteKit's own list
// leaves out what only a worker loads: the marker and its word lists.
import { readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import adapter from '@sveltejs/adapter-static'

/**
 * @param {import('@sveltejs/adapter-static').AdapterOptions} options
 * @returns {import('@sveltejs/kit').Adapter}
 */
export function offlineStatic(options) {
  const plain = adapter(options)
  return {
    ...plain,
    name: 'offline-static',
    async adapt(builder) {
      await plain.adapt(builder)
      const folder = options.pages ?? 'build'
      const app = builder.getAppPath()
      const built = readdirSync(join(folder, app), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map(({ parentPath, name }) =>
          join(parentPath, name).slice(folder.length).replaceAll('\\', '/'),
        )
        .sort()
      writeFileSync(join(folder, 'offline.json'), JSON.stringify(built))
    },
  }
}
