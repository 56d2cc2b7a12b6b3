import { z } from 'zod';

// zod probes `new Function` at its first parse, which a strict content policy reports. Imported first, before any schema is built.
z.config({ jitless: true });
