using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Format;
using Orlop.Boat.Things;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;

namespace Orlop.Presentation.Views;

/// <summary>A field that differs between two states of a thing.</summary>
public sealed record FieldDifference(string Label, string Was, string Becomes);

/// <summary>An edit as it is read: what becomes of which thing, field by field.</summary>
/// <param name="Id">Id of the thing.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Kind">What it is: "fuse".</param>
/// <param name="What">Added, changed or taken out.</param>
/// <param name="Fields">The fields that differ; for an added or removed thing those that are given.</param>
/// <param name="BuiltOn">Day it was built; null when it is not.</param>
/// <param name="IsAssumed">Nobody builds it: the alteration takes it as said.</param>
public sealed record EditView(string Id, string Title, string Kind, string What, IReadOnlyList<FieldDifference> Fields, DateOnly? BuiltOn, bool IsAssumed)
{
    private const string Added = "added";
    private const string TakenOut = "taken out";

    /// <summary>The thing is new: there is nothing that it was.</summary>
    public bool IsAdded => What == Added;

    /// <summary>The thing goes: there is nothing that it becomes.</summary>
    public bool IsTakenOut => What == TakenOut;

    /// <summary>An edit in the reader's units.</summary>
    /// <param name="boat">To say what is referred to by its name.</param>
    public static EditView Of(Edit edit, DisplayUnits units, CultureInfo culture, BoatModel? boat = null)
    {
        Thing shown = (edit.Becomes ?? edit.Was)!;
        string what = edit.Was is null ? Added : edit.Becomes is null ? TakenOut : "changed";
        return new EditView(edit.Id, shown.Title, Wording.KindOf(shown), what, Between(edit.Was, edit.Becomes, units, culture, boat), edit.BuiltOn, Assumptions.IsOne(edit));
    }

    /// <summary>The fields that differ between two states of a thing; either may be missing.</summary>
    /// <param name="boat">To say what is referred to by its name.</param>
    public static IReadOnlyList<FieldDifference> Between(Thing? was, Thing? becomes, DisplayUnits units, CultureInfo culture, BoatModel? boat = null)
    {
        Thing shown = (becomes ?? was)!;
        bool isSameKind = was is null || becomes is null || was.GetType() == becomes.GetType();
        return !isSameKind ? [new FieldDifference("Kind", Wording.KindOf(was!), Wording.KindOf(becomes!))] :
        [
            .. ThingSchema.Of(shown.GetType()).Fields.Where(field => field.Type != FieldType.Id)
                .Select(field => (Field: field, Was: was is null ? null : field.Get(was), Becomes: becomes is null ? null : field.Get(becomes)))
                .Where(pair => !Equals(pair.Was, pair.Becomes))
                .Select(pair => new FieldDifference(
                    FieldLabels.Of(pair.Field), FieldText.Show(pair.Field, pair.Was, units, culture, boat), FieldText.Show(pair.Field, pair.Becomes, units, culture, boat)))
                .Where(difference => difference.Was != difference.Becomes),
        ];
    }
}
