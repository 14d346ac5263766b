import { chromium } from '@playwright/test';
const b = await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox','--disable-gpu']});
const o='/tmp/words/';
for (const [n,w,h,scheme] of [['desk',1440,900,'light'],['phone',390,844,'dark']]) {
  const c = await b.newContext({viewport:{width:w,height:h},colorScheme:scheme,hasTouch:n==='phone',isMobile:n==='phone'});
  const p = await c.newPage();
  p.on('pageerror',e=>console.log('ERR',e.message)); p.on('console',m=>{if(m.type()==='error')console.log('console',m.text())});
  await p.goto('http://localhost:4747/glossary/#focal-length'); await p.waitForTimeout(300);
  console.log(n,'glossary height',await p.evaluate(()=>[document.documentElement.scrollHeight,document.documentElement.scrollWidth]));
  await p.screenshot({path:o+n+'-glossary.png'});
  await p.goto('http://localhost:4747/lessons/extension/'); await p.waitForTimeout(600);
  console.log(n,'terms',await p.locator('a.term').count());
  const t = p.locator('#idea a.term').nth(1);
  await t.scrollIntoViewIfNeeded();
  if(n==='phone'){ await t.evaluate(e=>window.scrollBy(0,e.getBoundingClientRect().top-600)); await p.waitForTimeout(300); await t.tap(); } else await t.hover();
  await p.waitForTimeout(600);
  console.log(n,p.url(), await p.locator('#meaning').evaluate(e=>[e.matches(':popover-open'),e.textContent,JSON.stringify(e.getBoundingClientRect())]));
  await p.screenshot({path:o+n+'-lesson.png'});
  await c.close();
}
await b.close();
