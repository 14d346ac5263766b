// Runs before the first paint: a reader who chose light or dark never sees the other flash by.
try {
  const theme = JSON.parse(localStorage.getItem('ring-and-ruler.theme') ?? 'null');
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch {
  // A page that cannot remember follows the system.
}
