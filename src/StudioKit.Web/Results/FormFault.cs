namespace StudioKit.Web.Results;

/// <summary>One thing wrong, with the field that it is about.</summary>
/// <param name="Path">Path of the field or section; empty where it is about the text as such.</param>
/// <param name="Room">Which form has that field.</param>
/// <param name="Group">Path of the group to open to see it; empty for the kit's own fields.</param>
/// <param name="Fault">What is wrong.</param>
public sealed record FormFault(string Path, FormRoom Room, string Group, Fault Fault);
