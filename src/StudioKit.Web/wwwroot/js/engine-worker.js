// The worker: a runtime of its own that holds the core. It answers one question after the other; of those in one lane that have not been begun only the newest counts.
// The loader takes a worker for a thread of its own where it finds no handler of messages, so the handler is set before it is loaded.
import { begin, copyRows, end, firstBytes, forget, pixelsAcross, pixelsDown, put } from './pictures.js';
import { runtimeOptions } from './runtime-options.js';

const queue = [];
let ready = false;
let answering = false;
let current = 0;
self.onmessage = ({ data }) => {
    queue.push(data);
    answerAll();
};

// Tells the loader that this is no thread of the page's own runtime.
globalThis.dotnetSidecar = true;

const core = [
    'StudioKit.Physics', 'StudioKit.Kits', 'StudioKit.Planning', 'StudioKit.Wording', 'UnitsNet', 'YamlDotNet',
];

// What only some questions need is loaded when the first of them comes.
const printing = ['StudioKit.Sheets', 'PdfSharp', 'PdfSharp.System', 'PdfSharp.Shared', 'OxyPlot', 'QRCoder', 'StudioKit.Typefaces', 'System.Private.Xml', 'System.IO.Compression', 'System.Runtime.Numerics'];
const field = ['StudioKit.Field', 'MathNet.Numerics', 'System.Threading.Tasks.Parallel', 'System.Runtime.Numerics'];
const needs = { offers: ['StudioKit.Sheets'], sheets: printing, pages: printing, zip: printing, outdoors: printing, 'read-frame': field, frame: field, ladder: field, correct: field, 'read-correction': field };
const loaded = new Map();

let runtime;
let room;

function load(names) {
    return Promise.all(names.map((name) => {
        if (!loaded.has(name)) {
            loaded.set(name, runtime.INTERNAL.loadLazyAssembly(`${name}.wasm`));
        }

        return loaded.get(name);
    }));
}

async function start() {
    const { dotnet } = await import('../_framework/dotnet.js');
    runtime = await dotnet.withRuntimeOptions(runtimeOptions).create();
    runtime.setModuleImports('engine', { report: (step) => self.postMessage({ number: current, step }), pixelsAcross, pixelsDown, firstBytes, copyRows });
    await load(core);
    room = (await runtime.getAssemblyExports('StudioKit.Web')).StudioKit.Web.Engine.EngineDoor;
    ready = true;
    await answerAll();
}

async function answerAll() {
    if (!ready || answering) {
        return;
    }

    answering = true;
    while (queue.length > 0) {
        const question = queue.shift();
        if (question.lane && queue.some((later) => later.lane === question.lane)) {
            self.postMessage({ number: question.number, answer: null });
        } else {
            await answer(question);
            // Lets messages in that came meanwhile, so that a newer question can take an older one's place.
            await new Promise((resolve) => setTimeout(resolve));
        }
    }

    answering = false;
}

async function answer({ number, kind, request, file }) {
    current = number;
    try {
        await load(needs[kind] ?? []);
        if (kind === 'take') {
            const bytes = room.Take(request);
            self.postMessage({ number, answer: bytes }, [bytes.buffer]);
            return;
        }

        if (kind === 'hand' || kind === 'forget') {
            self.postMessage({ number, answer: kind === 'hand' ? put(request, file) : forget(request) });
            return;
        }

        if (kind === 'read-frame') {
            await begin(JSON.parse(request).picture);
        }

        self.postMessage({ number, answer: room.Answer(kind, request) });
    } catch (fault) {
        self.postMessage({ number, fault: String(fault.message ?? fault) });
    } finally {
        end();
    }
}

start().catch((fault) => {
    const fail = ({ number }) => self.postMessage({ number, fault: `The planner could not be started: ${fault.message ?? fault}` });
    queue.splice(0).forEach(fail);
    self.onmessage = ({ data }) => fail(data);
});
