import { bag, wish, sub, searchKit, gainOfPart } from './_try.ts';
const show=(name:string,kit:any,s:any,b=0,n=4)=>{const t=performance.now();const r=searchKit(kit,s,b);const dt=performance.now()-t;
console.log('\n'+name,r.count,Object.entries(r.tally).filter(([,n])=>n).map(([v,n])=>v+':'+n).join(' '),dt.toFixed(1)+'ms');
[...r.suited].slice(0,n).forEach(i=>{const ch=r.chain(i);const q:any=ch.solved;const p:any=ch.parts.find((p:any)=>p.part==='lens');console.log('   ',ch.ids.slice(1).join('+')+` m${q.magnification.toFixed(3)} w${q.workingDistance.toFixed(0)} N${p.fNumber.toFixed(1)} Nw${q.effectiveFNumber.toFixed(1)} ${ch.merit?.toFixed(2)} ${ch.price}`)});
};
const gains=(kit:any,s:any)=>console.log('     gains', wish.map(p=>{const g=gainOfPart(kit,p,s,Infinity);return p.id+':'+(g.merit===null?(g.bestAfter?'NEW '+g.suited+' '+g.bestAfter.merit!.toFixed(1):'-'):g.merit.toFixed(2)+'/'+g.suited)}).join(' '));
const b=bag(); const all=[...b,...wish];
for (const z of [1,1.5,1.8]) for (const room of [200,150,60]) for (const iso of [400]) {const s=sub('butterfly',false,{d:z,room,iso});show(`butterfly z${z} room${room} iso${iso}`,b,s);gains(b,s)}
const sp=sub('spider',true);show('spider stack',b,sp);gains(b,sp);
for (const bud of [50,600,1000]) show('spider stack budget '+bud,all,sp,bud);
const fl=sub('flower',true,{});show('flower stack',b,fl);
show('stamp',b,sub('stamp'),0,12);gains(b,sub('stamp'));
for (const bud of [50,600,1000]) show('butterfly 1.5 budget '+bud,all,sub('butterfly',false,{d:1.5}),bud);
const hv=sub('hoverfly',true);for (const bud of [50,100,600]) show('hover stack budget '+bud,all,hv,bud);
