using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Review;
using Orlop.Store;

namespace Orlop.App.Sessions;

/// <summary>The opened boat at one moment, the same for all windows.</summary>
public sealed record BoatSnapshot
{
    /// <summary>The head revision: the boat as built and her alterations.</summary>
    public required Revision Head { get; init; }

    /// <summary>The draft that edits go into, never one that is built or dropped; null when edits change the boat as built.</summary>
    public Alteration? Draft { get; init; }

    /// <summary>The boat that pages show: as the open draft would make her, or as built.</summary>
    public required BoatModel Shown { get; init; }

    /// <summary>Edits of the open draft that no longer fit the boat as built.</summary>
    public IReadOnlyList<Clash> Clashes { get; init; } = [];

    /// <summary>The newest review that is ready; while <see cref="IsReviewing"/> it may be of an earlier moment, or a stage of the newest.</summary>
    public ReviewResult? Review { get; init; }

    /// <summary>A review of this moment is being worked out.</summary>
    public bool IsReviewing { get; init; }

    /// <summary>The review is of an earlier moment; of a stage of the newest, what waits is told by <see cref="ReviewResult.Waiting"/>.</summary>
    public bool IsReviewOld => Review is not null && (ReviewFailure is not null || !ReferenceEquals(Review.AsBuilt, AsBuilt) || Review.AlterationId != Draft?.Id);

    /// <summary>The last review could not be finished, and why.</summary>
    public string? ReviewFailure { get; init; }

    /// <summary>The boat as built.</summary>
    public BoatModel AsBuilt => Head.Boat;
}
