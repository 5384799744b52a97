import { it } from 'vitest';
import fc from 'fast-check';
import { calculators } from '#core/calculators/registry';
import { lengthFromInches } from '#core/units/length';
import { anyInputOf } from '#test/helpers/any-input';
import { anyMeasurements } from '#test/helpers/measurements';
import * as V from '#test/helpers/one-value';
import fs from 'node:fs';
it('x', () => {
  const seen = new Map<string, {n:number, ex:string}>();
  for (const c of calculators) {
    const check=(input:object)=>{
      const a=c.calculate(input); if(!a.ok) return;
      const w={calculation:a.value,needs:c.needs?.(input,a.value.details,lengthFromInches(42))??[],cuts:c.cuts?.(input,a.value.details)??[]};
      for (const f of [V.contradictions,V.figuresWithoutWorking,V.needsWithoutFigure,V.cutsWithoutAnswer]) for (const x of f(w)) {
        const key=`${c.name} ${f.name} ${x.replace(/[:{].*/,'').replace(/, (Light|Dark|Six)$/,'')}`; const s=seen.get(key)??{n:0,ex:x.slice(0,400)+'   INPUT '+JSON.stringify(input).slice(0,700)}; s.n++; seen.set(key,s);
      }
    };
    fc.assert(fc.property(anyMeasurements,(m)=>{check(c.fromProject(m));}),{numRuns:100, seed:1});
    fc.assert(fc.property(anyInputOf(c.input),(raw)=>{const i=c.input.safeParse(raw); if(i.success) check(i.data);}),{numRuns:400, seed:2});
  }
  fs.writeFileSync('/tmp/agree-survey3.txt', [...seen].map(([k,v])=>`${k}: ${v.n} ${v.ex}`).join('\n'));
},60000);
