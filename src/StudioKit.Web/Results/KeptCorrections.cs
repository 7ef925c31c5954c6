namespace StudioKit.Web.Results;

/// <summary>The corrections that plans are made with.</summary>
/// <param name="Kits">What is kept, one for a kit.</param>
/// <param name="Faults">Texts that cannot be used, and why.</param>
public sealed record KeptCorrections(IReadOnlyList<KeptCorrection> Kits, IReadOnlyList<string> Faults);
