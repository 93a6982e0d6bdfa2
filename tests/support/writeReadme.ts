/** `npm run readme`: holds the conversation anew and writes it into the README. */
import { readFileSync, writeFileSync } from 'node:fs';
import { transcript, withTranscript } from './transcript.ts';

writeFileSync('README.md', withTranscript(readFileSync('README.md', 'utf8'), await transcript()));
