namespace StudioKit.Web.Results;

/// <summary>Texts of the parts that lie beside a kit, by <c>KIND/NAME</c>; they go before those that come with the page.</summary>
/// <param name="Texts">The texts.</param>
public sealed record PartTexts(IReadOnlyDictionary<string, string> Texts);
