using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A piece of pipe in its place.</summary>
/// <param name="Group">The letter that all pieces of this length share.</param>
/// <param name="Number">Its number among them [1]; ≥ 1.</param>
/// <param name="Role">What it does.</param>
/// <param name="From">Label of the joint at its first end.</param>
/// <param name="To">Label of the joint at its second end.</param>
/// <param name="CentreLine">Joint centre to joint centre.</param>
/// <param name="TakeOffFrom">Take-off of the fitting at the first end.</param>
/// <param name="TakeOffTo">Take-off of the fitting at the second end.</param>
/// <param name="InsertionGap">How far short of each socket's bottom it stops.</param>
/// <param name="CutLength">Length to cut, before rounding.</param>
/// <param name="Part">Which part of a split member it is, counted from 1 [1].</param>
/// <param name="Parts">Parts the member is split into [1].</param>
public sealed record FrameMember(
    string Group,
    int Number,
    FrameMemberRole Role,
    string From,
    string To,
    Length CentreLine,
    Length TakeOffFrom,
    Length TakeOffTo,
    Length InsertionGap,
    Length CutLength,
    int Part,
    int Parts)
{
    /// <summary>Label on piece and drawing: letter and number, A1.</summary>
    public string Label => FormattableString.Invariant($"{Group}{Number}");
}
