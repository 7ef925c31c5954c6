using StudioKit.Field.Calibration.Drift;

namespace StudioKit.Cli.Tables;

/// <summary>What may be read next for some cards, the reading that tells most first.</summary>
internal sealed record CardsReadings(LitCards Cards, IReadOnlyList<CandidateReading> Candidates);
