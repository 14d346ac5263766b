// Before the first paint, so that a reader who chose light or dark never sees the other flash by.
try {
  const theme = localStorage.getItem('ring-and-ruler.theme');
  if (/^"(light|dark)"$/.test(theme)) document.documentElement.dataset.theme = JSON.parse(theme);
} catch {
  // Storage may be forbidden: the page then follows the system.
}
