/** Every page is a file; what is personal is read in the browser, from this browser's own storage. */
export const prerender = true
export const trailingSlash = 'ignore'
