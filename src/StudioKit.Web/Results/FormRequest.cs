namespace StudioKit.Web.Results;

/// <summary>Asks for a form of a kit.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name, as errors name it.</param>
/// <param name="Room">Which half of the kit.</param>
/// <param name="Opened">Path of the section whose fields are wanted, those around it included; empty for none.</param>
/// <param name="Adding">Path of the list to which an entry is to be added; empty for none.</param>
public sealed record FormRequest(string Text, string FileName, FormRoom Room, string Opened, string Adding);
