using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Tests.Log.Release;

public sealed class NearSessionsTests
{
    // A few days and a coarse grid, so that sessions share days, spots and the edges of what is near.
    private static readonly Gen<FieldSession[]> Sessions =
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 6], Gen.Int[0, 6], Gen.Int[0, 9], (day, north, east, lost) => new FieldSession
        {
            Start = FieldDate.OfDay(new DateOnly(2026, 5, 9 + day)),
            Latitude = lost == 0 ? null : 52 + (0.05 * north),
            Longitude = lost == 0 ? null : -21 - (0.05 * east),
        }).Array[1, 30].Select(sessions => sessions.Select((session, i) => session with { Id = $"session {i}" }).ToArray());

    /// <summary>Held against looking through all sessions for each: of the same day, or less than a tenth of a degree away both ways.</summary>
    [Fact]
    public void Sessions_near_another_are_those_that_a_look_through_all_finds() =>
        Sessions.Sample(sessions =>
        {
            var near = new NearSessions(sessions);
            foreach (var session in sessions)
            {
                var all = sessions.Where(other => other.Latitude is not null && (other.Start.Day == session.Start.Day
                    || (Math.Abs((session.Latitude - other.Latitude) ?? 1) < 0.1 && Math.Abs((session.Longitude - other.Longitude) ?? 1) < 0.1))).ToList();
                (near.Of(session)?.First.Id, near.Of(session)?.Count ?? 0).Should().Be((all.FirstOrDefault()?.Id, all.Count));
            }
        });
}
