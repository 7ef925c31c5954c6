using StudioKit.Physics;

namespace StudioKit.Kits.Cards;

/// <summary>What came of reading a card template.</summary>
/// <param name="Template">The template; none where there are errors.</param>
/// <param name="Diagnostics">Everything wrong with the file, in order of place.</param>
public sealed record CardTemplateReadResult(CardTemplate? Template, ValueList<Diagnostic> Diagnostics);
