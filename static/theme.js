// Before the first paint, so that a page at night is never white for a moment. The switch is ThemeSwitch.svelte.
try {
  const theme = localStorage.getItem('second-ink-theme')
  if (theme === 'day' || theme === 'night') document.documentElement.dataset.theme = theme
} catch {
  // Nothing can be kept here: the device decides.
}
