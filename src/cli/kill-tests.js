// npm run test:kill: the browser is killed at 50 random moments while text is typed, and at some while it keeps and restores.
process.env['SECOND_INK_KILLS'] ??= '50'
process.argv.push('kill')
void import('./browser-tests.js')
