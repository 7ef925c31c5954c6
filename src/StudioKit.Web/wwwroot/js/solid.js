// The studio in space, drawn only when something changes: nothing moves by itself. Turned by a finger, the mouse or the arrow keys; plus and minus, the wheel or two fingers come nearer.
const shown = new WeakMap();
const turnStep = Math.PI / 24;
const zoomStep = 1.12;

export async function show(canvas, picture) {
    const element = document.getElementById(canvas);
    if (!element) {
        return;
    }

    const three = await import('../vendor/three/three.js');
    let view = shown.get(element);
    if (!view) {
        view = begin(three, element);
        shown.set(element, view);
    }

    view.fill(JSON.parse(picture));
}

function begin(three, element) {
    const renderer = new three.WebGLRenderer({ canvas: element, antialias: true, alpha: true });
    const camera = new three.PerspectiveCamera(35, 1, 10, 20000);
    const scene = new three.Scene();
    const sun = new three.DirectionalLight(0xffffff, 2);
    sun.position.set(-1, 2, 1.5);
    scene.add(new three.AmbientLight(0xffffff, 1.6), sun);
    const eye = { around: -0.6, above: 0.35, far: 2500, centre: new three.Vector3() };
    let studio = null;

    const draw = () => {
        const { clientWidth, clientHeight } = element;
        if (clientWidth === 0 || clientHeight === 0) {
            return;
        }

        renderer.setPixelRatio(Math.min(2, devicePixelRatio));
        renderer.setSize(clientWidth, clientHeight, false);
        camera.aspect = clientWidth / clientHeight;
        camera.updateProjectionMatrix();
        camera.position.set(
            eye.centre.x + eye.far * Math.sin(eye.around) * Math.cos(eye.above),
            eye.centre.y + eye.far * Math.sin(eye.above),
            eye.centre.z + eye.far * Math.cos(eye.around) * Math.cos(eye.above));
        camera.lookAt(eye.centre);
        renderer.render(scene, camera);
        element.dataset.drawn = renderer.info.render.triangles > 0;
    };

    const fill = (picture) => {
        if (studio) {
            scene.remove(studio);
            studio.traverse((part) => { part.geometry?.dispose(); part.material?.dispose(); });
        }

        studio = build(three, picture, coloursOf(element));
        scene.add(studio);
        const box = new three.Box3().setFromObject(studio.getObjectByName('built'));
        box.getCenter(eye.centre);
        eye.far = box.getSize(new three.Vector3()).length() * 1.6;
        draw();
    };

    new ResizeObserver(draw).observe(element);
    turnable(element, eye, draw);
    return { fill };
}

function coloursOf(element) {
    const style = getComputedStyle(element);
    const colour = (name) => style.getPropertyValue(name).trim();
    return { pipe: colour('--soft'), ground: colour('--line'), flash: colour('--flash'), camera: colour('--deep'), ink: colour('--ink') };
}

// Right, up and towards the camera's side; the plan counts right, back and up.
const toScene = (three, place) => new three.Vector3(place.right, place.up, -place.back);

function build(three, picture, colours) {
    const whole = new three.Group();
    const group = new three.Group();
    // The ground lies beyond everything and says nothing about how near to go.
    group.name = 'built';
    whole.add(group);
    const middle = picture.panel.length > 0 ? picture.panel[picture.panel.length - 1].x / 2 : 0;
    const ground = new three.Mesh(new three.PlaneGeometry(picture.panelWidth * 3, picture.panelWidth * 3), new three.MeshLambertMaterial({ color: colours.ground, side: three.DoubleSide, transparent: true, opacity: 0.5 }));
    ground.rotation.x = -Math.PI / 2;
    ground.position.set(0, -1, -middle);
    whole.add(ground);
    picture.bars.forEach((bar) => group.add(rod(three, toScene(three, bar.from), toScene(three, bar.to), bar.thickness / 2, colours.pipe)));
    group.add(sheet(three, picture, colours));
    picture.lights.forEach((light) => group.add(windowOf(three, light, colours)));
    picture.sights.forEach((sight) => {
        const pupil = toScene(three, sight.pupil);
        const body = new three.Mesh(new three.SphereGeometry(22, 20, 14), new three.MeshLambertMaterial({ color: colours.camera }));
        body.position.copy(pupil);
        const line = new three.Line(new three.BufferGeometry().setFromPoints([pupil, toScene(three, sight.aim)]), new three.LineDashedMaterial({ color: colours.camera, dashSize: 20, gapSize: 14 }));
        line.computeLineDistances();
        group.add(body, line);
    });
    const subject = new three.Mesh(new three.SphereGeometry(10, 16, 12), new three.MeshLambertMaterial({ color: colours.ink }));
    subject.position.copy(toScene(three, picture.subject));
    group.add(subject);
    return whole;
}

function rod(three, from, to, radius, colour) {
    const along = new three.Vector3().subVectors(to, from);
    const mesh = new three.Mesh(new three.CylinderGeometry(radius, radius, along.length(), 14), new three.MeshLambertMaterial({ color: colour }));
    mesh.position.copy(from).addScaledVector(along, 0.5);
    mesh.quaternion.setFromUnitVectors(new three.Vector3(0, 1, 0), along.normalize());
    return mesh;
}

function strip(three, rows, material) {
    const geometry = new three.BufferGeometry();
    const corners = rows.flatMap(([left, right]) => [left, right].flatMap((place) => [place.x, place.y, place.z]));
    const faces = rows.slice(1).flatMap((_, i) => [2 * i, 2 * i + 1, 2 * i + 2, 2 * i + 1, 2 * i + 3, 2 * i + 2]);
    geometry.setAttribute('position', new three.BufferAttribute(new Float32Array(corners), 3));
    geometry.setIndex(faces);
    geometry.computeVertexNormals();
    return new three.Mesh(geometry, material);
}

function sheet(three, picture, colours) {
    const half = picture.panelWidth / 2;
    const rows = picture.panel.map((spot) => [new three.Vector3(-half, spot.y, -spot.x), new three.Vector3(half, spot.y, -spot.x)]);
    const mesh = strip(three, rows, new three.MeshLambertMaterial({ color: 0xffffff, side: three.DoubleSide, transparent: true, opacity: 0.75 }));
    mesh.add(new three.LineSegments(new three.EdgesGeometry(mesh.geometry), new three.LineBasicMaterial({ color: colours.ink })));
    return mesh;
}

function windowOf(three, light, colours) {
    const [front, back] = [toScene(three, light.front), toScene(three, light.back)];
    const aside = new three.Vector3(light.width / 2, 0, 0);
    const rows = [front, back].map((place) => [place.clone().sub(aside), place.clone().add(aside)]);
    const mesh = strip(three, rows, new three.MeshLambertMaterial({ color: colours.flash, side: three.DoubleSide }));
    mesh.add(new three.LineSegments(new three.EdgesGeometry(mesh.geometry), new three.LineBasicMaterial({ color: colours.ink })));
    return mesh;
}

function turnable(element, eye, draw) {
    const touching = new Map();
    const turn = (around, above) => {
        eye.around += around;
        eye.above = Math.min(1.5, Math.max(-0.3, eye.above + above));
        draw();
    };
    const zoom = (factor) => {
        eye.far = Math.min(12000, Math.max(200, eye.far * factor));
        draw();
    };
    const apart = () => {
        const [one, other] = [...touching.values()];
        return Math.hypot(one.x - other.x, one.y - other.y);
    };

    element.addEventListener('pointerdown', (event) => {
        element.setPointerCapture(event.pointerId);
        touching.set(event.pointerId, { x: event.clientX, y: event.clientY });
    });
    element.addEventListener('pointermove', (event) => {
        const last = touching.get(event.pointerId);
        if (!last) {
            return;
        }

        const before = touching.size === 2 ? apart() : 0;
        touching.set(event.pointerId, { x: event.clientX, y: event.clientY });
        if (touching.size === 2) {
            zoom(before / Math.max(1, apart()));
        } else {
            turn((last.x - event.clientX) / 200, (event.clientY - last.y) / 200);
        }
    });
    const lift = (event) => touching.delete(event.pointerId);
    element.addEventListener('pointerup', lift);
    element.addEventListener('pointercancel', lift);
    element.addEventListener('wheel', (event) => {
        event.preventDefault();
        zoom(event.deltaY > 0 ? zoomStep : 1 / zoomStep);
    }, { passive: false });
    element.addEventListener('keydown', (event) => {
        const act = {
            ArrowLeft: () => turn(-turnStep, 0), ArrowRight: () => turn(turnStep, 0), ArrowUp: () => turn(0, turnStep), ArrowDown: () => turn(0, -turnStep),
            '+': () => zoom(1 / zoomStep), '=': () => zoom(1 / zoomStep), '-': () => zoom(zoomStep),
        }[event.key];
        if (act) {
            event.preventDefault();
            act();
        }
    });
}
