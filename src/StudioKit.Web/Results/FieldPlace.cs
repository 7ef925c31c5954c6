namespace StudioKit.Web.Results;

/// <summary>Where the form has a key of the kit.</summary>
/// <param name="Path">Path of the field or section to take in hand.</param>
/// <param name="Room">Which form has it.</param>
/// <param name="Group">Path of the group to open; empty for the kit's own fields.</param>
/// <param name="Adding">Path of the list to which an entry has to be added before there is such a key; empty where there is one.</param>
/// <param name="Label">What to call it, with what stands there now.</param>
public sealed record FieldPlace(string Path, FormRoom Room, string Group, string Adding, string Label);
