namespace StudioKit.Web.Results;

/// <summary>A group of fields.</summary>
/// <param name="Path">Its path in the kit, e.g. <c>flashes[0]</c>.</param>
/// <param name="Title">Its name, or what such a group is called.</param>
/// <param name="Help">What it describes, in a sentence.</param>
/// <param name="IsWritten">Whether the kit says anything of it.</param>
/// <param name="FaultCount">How many things are wrong with it and what it holds.</param>
/// <param name="Faults">What is wrong with it as a whole.</param>
/// <param name="IsOpen">Whether its fields are along.</param>
/// <param name="Lines">Its fields.</param>
/// <param name="Sections">The sections in it.</param>
public sealed record FormGroupLine(
    string Path, string Title, string Help, bool IsWritten, int FaultCount, IReadOnlyList<Fault> Faults, bool IsOpen, IReadOnlyList<FormLine> Lines, IReadOnlyList<FormSection> Sections);
