namespace StudioKit.Web.Results;

/// <summary>A section of a form: one group of fields, or a list of such groups.</summary>
/// <param name="Path">Its path in the kit, e.g. <c>flashes</c>.</param>
/// <param name="Label">What to call it.</param>
/// <param name="Help">What it describes, in a sentence.</param>
/// <param name="IsList">Whether it is a list.</param>
/// <param name="One">What one entry is called in a sentence, e.g. <c>flash</c>.</param>
/// <param name="Groups">The group, or the entries.</param>
/// <param name="NewEntry">What a new entry must say, where one is to be added.</param>
public sealed record FormSection(string Path, string Label, string Help, bool IsList, string One, IReadOnlyList<FormGroupLine> Groups, IReadOnlyList<FormLine> NewEntry);
