using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Blocks in order → when each can begin: as early as the day and the blocks before it allow, and as late as those after it do.</summary>
internal static class BlockTimes
{
    /// <summary>The blocks with their hours; a block as it is where neither the sun nor its subjects' hours are known.</summary>
    public static ValueList<SessionBlock> Placed(IReadOnlyList<BlockDraft> drafts, IReadOnlyList<SessionBlock> blocks, DayCourse day)
    {
        var hours = Early(drafts, blocks, day);
        var end = int.MaxValue;
        for (var i = blocks.Count - 1; i >= 0; i--)
        {
            if (hours[i] is { Chosen: { } chosen } fits)
            {
                end = Math.Min(chosen.To, end) - Minutes(blocks[i].Time);
                hours[i] = fits with { LatestBegin = end };
            }
        }

        return [.. blocks.Select((block, i) => block with { Hours = hours[i] })];
    }

    private static BlockHours?[] Early(IReadOnlyList<BlockDraft> drafts, IReadOnlyList<SessionBlock> blocks, DayCourse day)
    {
        var hours = new BlockHours?[blocks.Count];
        var now = 0;
        for (var i = 0; i < hours.Length; i++)
        {
            if (day.KnowsTheSun || drafts[i].Active.Count > 0)
            {
                hours[i] = Of(drafts[i], blocks[i], day, now);
                now = hours[i]!.EarliestBegin is { } begin ? begin + Minutes(blocks[i].Time) : now;
            }
        }

        return hours;
    }

    private static BlockHours Of(BlockDraft draft, SessionBlock block, DayCourse day, int now)
    {
        var (times, needed) = (draft.Times(day), Minutes(block.Time));
        var chosen = times.Where(time => time.To - Math.Max(time.From, now) >= needed).OrderBy(time => Math.Max(time.From, now)).ThenByDescending(time => time.To).FirstOrDefault();
        var room = (chosen is null ? times : [chosen]).Select(time => time.To - Math.Max(time.From, now)).Append(0).Max();
        return new BlockHours
        {
            Times = [.. times],
            Chosen = chosen,
            EarliestBegin = chosen is null ? null : Math.Max(chosen.From, now),
            Room = Duration.FromMinutes(room),
            RoundsThatFit = Fitting(block, room),
            WithoutClock = chosen is null && draft.Group.Clock is not null ? Long(day.Times(draft.Group.Light, null, draft.Active), needed) : [],
            WithoutActivity = chosen is null && draft.Active.Count > 0 ? Long(day.Times(draft.Group.Light, draft.Group.Clock, []), needed) : [],
            Expected = day.Expected(draft.Group.Clock, draft.Active),
        };
    }

    private static ValueList<LightTime> Long(IReadOnlyList<LightTime> times, int needed) => [.. times.Where(time => time.To - time.From >= needed)];

    private static int Fitting(SessionBlock block, int room)
    {
        var (left, more) = (room - block.First.Time.Minutes, block.Following?.Time.Minutes ?? 0);
        return left < 0 ? 0 : more <= 0 ? block.Rounds : Math.Min(block.Rounds, 1 + (int)Math.Floor(left / more));
    }

    private static int Minutes(Duration time) => (int)Math.Ceiling(time.Minutes - 1e-9);
}
