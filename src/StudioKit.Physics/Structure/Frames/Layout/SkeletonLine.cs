namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>A centre line between two joints of a <see cref="Skeleton"/>, part of a split member or a whole one.</summary>
internal readonly record struct SkeletonLine(FrameMemberRole Role, int From, int To, int Part, int Parts);
