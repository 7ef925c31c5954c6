// What the view in three dimensions needs of three.js, and no more, so that the rest can be left out.
export {
    AmbientLight, Box3, BoxGeometry, BufferAttribute, BufferGeometry, Color, CylinderGeometry, DirectionalLight, DoubleSide, EdgesGeometry, Group, Line, LineBasicMaterial,
    LineDashedMaterial, LineSegments, Mesh, MeshLambertMaterial, PerspectiveCamera, PlaneGeometry, Scene, SphereGeometry, Vector3, WebGLRenderer,
} from 'three';
