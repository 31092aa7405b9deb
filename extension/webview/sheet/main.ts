/** The page of a sheet: shows what the server made and reports its buttons. It knows nothing of what is on the sheet. */

import { connectSheetHost } from './host.ts';
import { createSheetPage } from './page.ts';

const host = connectSheetHost();
host.onMessage(createSheetPage(host));
host.post({ type: 'ready' });
