namespace StudioKit.Web.Results;

/// <summary>Asks for one change of a kit's text as a form makes it.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="Kind">What is to be done.</param>
/// <param name="Path">Path of the field, entry or list.</param>
/// <param name="Values">The value to write; for a new entry of groups the values of its keys.</param>
/// <param name="Place">New place of an entry that is moved, or place of one that is added, from 0.</param>
public sealed record FormEditRequest(string Text, FormEditKind Kind, string Path, IReadOnlyList<FormValue> Values, int Place = 0);
