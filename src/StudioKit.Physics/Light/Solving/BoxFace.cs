namespace StudioKit.Physics.Light.Solving;

/// <summary>The surfaces round the light; the panel comes last because its points receive from all others.</summary>
internal enum BoxFace
{
    Floor,
    Ground,
    Left,
    Right,
    Front,
    Back,
    Panel,
}
