namespace StudioKit.Web.Results;

/// <summary>Texts of correction files that are kept beside kits; from now on plans are made with them.</summary>
/// <param name="Texts">The texts, one for a kit.</param>
public sealed record CorrectionTexts(IReadOnlyList<string> Texts);
