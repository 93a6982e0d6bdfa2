/** Words as they are heard, typed in haste or spoken in Scots, and the plain word that each stands for. */

/** As heard by a dictation, and as typed in haste. */
export const HEARD: Readonly<Record<string, string>> = {
  shd: 'should',
  shud: 'should',
  shoud: 'should',
  shuold: 'should',
  shoudl: 'should',
  shld: 'should',
  wld: 'would',
  woud: 'would',
  cld: 'could',
  coud: 'could',
  yday: 'yesterday',
  ystrday: 'yesterday',
  tmrow: 'tomorrow',
  popt: 'popped',
  snapt: 'snapped',
  dropt: 'dropped',
  chk: 'check',
  chkd: 'checked',
  clnd: 'cleaned',
  rplcd: 'replaced',
  svc: 'service',
  noz: 'nozzle',
  wk: 'week',
  zed: 'z',
  zee: 'z',
  greece: 'grease',
  greeced: 'greased',
};

export const SCOTS: Readonly<Record<string, string>> = {
  doon: 'down', oot: 'out', aff: 'off', noo: 'now', aboot: 'about', roon: 'round', roond: 'round', tae: 'to', frae: 'from', wi: 'with', baith: 'both', yin: 'one',
  twa: 'two', auld: 'old', wis: 'was', wur: 'were', hae: 'have', huv: 'have', gie: 'give', gied: 'gave', heid: 'head', hame: 'home', whit: 'what', anither: 'another',
  didnae: "didn't", isnae: "isn't", wisnae: "wasn't", wasnae: "wasn't", cannae: "can't", couldnae: "couldn't", dinnae: "don't", disnae: "doesn't", doesnae: "doesn't", havnae: "haven't", havenae: "haven't", hasnae: "hasn't", hadnae: "hadn't", wouldnae: "wouldn't", willnae: "won't", shouldnae: "shouldn't",
  nae: 'no', naw: 'no', thon: 'that', agen: 'again', evrythin: 'everything', evry: 'every', efter: 'after', afore: 'before', ower: 'over', cloot: 'cloth', clarty: 'dirty', mingin: 'dirty',
  aroon: 'round', ontae: 'onto', intae: 'into', intil: 'into', fae: 'from', wae: 'with', wiv: 'with', owre: 'over', thro: 'through', throo: 'through', wuz: 'was', woz: 'was', hiv: 'have', diz: 'does', dae: 'do', daein: 'doing',
  tak: 'take', mak: 'make', isna: "isn't", wisna: "wasn't", disna: "doesn't", didna: "didn't", dinna: "don't", winnae: "won't", winna: "won't", canna: "can't", couldna: "couldn't", wouldna: "wouldn't", hasna: "hasn't", huvnae: "haven't", hivnae: "haven't", arenae: "aren't",
  urnae: "aren't", gonnae: 'gonna', gunnae: 'gonna', owd: 'old', cauld: 'cold', yins: 'ones', aw: 'all', mair: 'more', maist: 'most', ither: 'other', thae: 'those', yon: 'that', jist: 'just', whaur: 'where', deid: 'dead', hauns: 'hands',
  haun: 'hand', ticht: 'tight', richt: 'right', nicht: 'night', licht: 'light', guid: 'good', drookit: 'wet', boggin: 'dirty', mawkit: 'dirty', gubbed: 'broken', bruk: 'broken', knackert: 'knackered', itsel: 'itself', masel: 'myself', mesel: 'myself', everythin: 'everything',
  nowt: 'nothing', windae: 'window', wan: 'one', windaes: 'windows', awthing: 'everything', somethin: 'something', summat: 'something', nothin: 'nothing', nuthin: 'nothing', anythin: 'anything', owt: 'anything',
}; // prettier-ignore
