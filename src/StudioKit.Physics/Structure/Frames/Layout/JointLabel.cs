namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Labels of joints by their place in the skeleton.</summary>
internal static class JointLabel
{
    public static string For(int joint) => FormattableString.Invariant($"J{joint + 1}");
}
