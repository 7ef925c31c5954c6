using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>A piece of pipe in its place.</summary>
/// <param name="Label">Label on piece and drawing: a letter for its length and a number, A1.</param>
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
    string Label,
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
    /// <summary>The letter that all pieces of this length share.</summary>
    public string Group => Label.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
}
