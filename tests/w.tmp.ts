import { weightOf } from './bench/weight.ts';
for (const p of ['bench/', 'kit/', 'ruler/', 'lessons/planning-a-picture/']) { const { js, laterJs } = weightOf(p); console.log(p, js, laterJs); }
